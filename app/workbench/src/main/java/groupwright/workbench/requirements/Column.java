package groupwright.workbench.requirements;

/** The columns of the table, from left to right. */
enum Column {
    LADDER,
    ID,
    TITLE,
    FIGURE,
    TARGET,
    VALUE,
    BAR,
    MARGIN,
    VERDICT;

    /** Key of the word in the head; the value is headed by the code of the lead concept. */
    String key() {
        return "head." + name();
    }

    /** Room at the left and right of its cells, at 100 %. */
    int padding() {
        return switch (this) {
            case TARGET, VALUE -> 0;
            case BAR, MARGIN -> 4;
            case LADDER, ID, TITLE, FIGURE, VERDICT -> 8;
        };
    }

    static Column at(int index) {
        return values()[index];
    }
}
