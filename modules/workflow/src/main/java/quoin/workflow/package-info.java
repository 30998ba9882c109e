/**
 * The order of work: stages, gates, staleness, the state of the day. Everything here is computed from a
 * {@link quoin.logbook.Day} and kept nowhere, so undo, recovery and reopening need nothing of their own.
 *
 * <p>What was decided, and why:
 * <ul>
 * <li><b>Recording is never refused.</b> Each reading is seen twice: as last read, which is shown, and as last read in order,
 * which counts. A figure is in order when the conditions of its stage held as it was taken and every stage before it was
 * signed off; the reasons are kept with one that is not.
 * <li><b>A reading belongs to the first stage that lists it</b>, wherever it is typed. Heights typed in the corner weights
 * renew the ride height stage.
 * <li><b>Staleness is a table</b> ({@link quoin.workflow.Staleness}): what happened by what was read. A condition that goes
 * back to what it was leaves a doubt, a turn that is undone does not: the thread may not be where it was. A doubt does not
 * undo a signed stage; a stage is not signed on one.
 * <li><b>A signed stage that went stale comes back by reading alone.</b> No new signature is asked for where the car is
 * inside again; it says that it was read again.
 * <li><b>Camber work does not send the racer back at once.</b> Heights and weights that only angle work made stale wait for
 * the final re-check, which always takes weights and heights again after the last sign-off before it, even where
 * nothing was turned. Angles are taken again there only where something disturbed them; perch work within 2 mm of leg is
 * no reason.
 * <li><b>Closing has an order</b> ({@link quoin.workflow.Closing}): bars joined and weighed with them against the last
 * weighing without, dampers, nuts, one look at the toe with the lock still in where rods were turned, lock out. Whatever
 * is turned loosens its nut again.
 * <li><b>The next step never leads into a dead end.</b> Only stages before the first open one are looked after, as what is
 * read for later ones would not count; doing the next step again and again closes the day from any state of it.
 * <li><b>A written reason opens every gate</b> and is kept in the entry; the stage holds until the car is disturbed.
 * <li><b>Sign-off is by simple acceptance</b> (JCGM 106:2012, 8.2): inside is inside. The probability of being inside
 * stands beside it as a verdict and a finding, it locks nothing.
 * </ul>
 */
package quoin.workflow;
