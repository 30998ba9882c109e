/** Loop closure of one rigid body guided by joints, by Newton's method with analytic derivatives; arrays, mm and radians. */
package quoin.suspension.solver;
