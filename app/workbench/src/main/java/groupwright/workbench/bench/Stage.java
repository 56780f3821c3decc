package groupwright.workbench.bench;

/** The four stages of the work, in order; people step back and forth between them. */
public enum Stage {
    LISTEN,
    SHAPE,
    PROVE,
    SETTLE
}
