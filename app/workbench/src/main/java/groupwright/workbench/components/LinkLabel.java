package groupwright.workbench.components;

import groupwright.workbench.look.Type;
import javax.accessibility.AccessibleRole;

/** A text that leads to a record, a page or a place: accent and underlined; a click, Enter or Space follows it. */
public class LinkLabel extends PaintedView<String> {
    /** A link in the size of tables. */
    public LinkLabel(String text, Runnable followed) {
        this(text, Type.TABLE, followed);
    }

    public LinkLabel(String text, Type type, Runnable followed) {
        super(new LinkText(LinkText.Kind.LEADS, type), text, AccessibleRole.HYPERLINK);
        Press.install(this, followed);
    }
}
