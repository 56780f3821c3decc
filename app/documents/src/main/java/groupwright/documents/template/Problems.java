package groupwright.documents.template;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.commonmark.node.Node;

/** Collects problems of one template. */
final class Problems {
    private final String template;
    private final Set<Problem> all = new LinkedHashSet<>(); // a repeated section meets a problem once for each item

    Problems(String template) {
        this.template = template;
    }

    void add(Problem.Kind kind, String file, int line, int column, String wrong) {
        all.add(new Problem(kind, file, line, column, wrong));
    }

    void add(Problem.Kind kind, Node node, Origin origin, String wrong) {
        add(kind, origin.file(), origin.line(node), origin.column(node), wrong);
    }

    int count() {
        return all.size();
    }

    void tooMuch(String wrong) {
        add(Problem.Kind.TOO_MUCH, template, 1, 1, wrong);
    }

    List<Problem> all() {
        return List.copyOf(all);
    }
}
