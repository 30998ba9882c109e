/** What every suspension type must pass; ships as the {@code tests} jar of the suspension module for authors of new types. */
package quoin.suspension.testkit;
