package quoin.setupsheet.layout;

/** A part of the sheet that stays on one page. */
interface Block {

    /** Height it takes, mm. */
    double heightMm();

    /**
     * Draws it.
     *
     * @param topMm where it begins, from the top of the paper
     */
    void draw(Pen pen, double topMm);

    /** True for a heading, which does not stand alone at the end of a page. */
    default boolean leadsOn() {
        return false;
    }
}
