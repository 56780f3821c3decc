package groupwright.documents.template;

import java.util.Map;

/** The limits of templates, for those who write about them. */
public final class TemplateLimits {
    private TemplateLimits() {}

    /** Each limit as a number in digits, by the name it has in the guide. */
    public static Map<String, String> shown() {
        Limits limits = Limits.STANDARD;
        return Map.of(
                "bytes", Integer.toString(limits.bytes()),
                "depth", Integer.toString(limits.depth()),
                "loops", Integer.toString(limits.loops()),
                "bodies", Integer.toString(limits.bodies()),
                "most", Integer.toString(limits.blocks()));
    }
}
