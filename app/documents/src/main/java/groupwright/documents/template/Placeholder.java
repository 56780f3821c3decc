package groupwright.documents.template;

import org.commonmark.node.CustomNode;

/** A placeholder between double braces, before it is filled. */
final class Placeholder extends CustomNode {
    private final String query;
    private final Form form;

    /** Whether the braces are in order. */
    enum Form {
        WHOLE,
        NOT_CLOSED
    }

    Placeholder(String query, Form form) {
        this.query = query;
        this.form = form;
    }

    String query() {
        return query;
    }

    Form form() {
        return form;
    }
}
