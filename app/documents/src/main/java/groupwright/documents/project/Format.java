package groupwright.documents.project;

/** What a document can be written as. */
public enum Format {
    MARKDOWN(".md"),
    PDF(".pdf");

    private final String ending;

    Format(String ending) {
        this.ending = ending;
    }

    /** How its files end. */
    String ending() {
        return ending;
    }
}
