package groupwright.workbench;

/** Starts Groupwright. */
public final class Main {
    private Main() {}

    /** @param arguments the command line */
    public static void main(String[] arguments) {
        System.out.println("Groupwright");
    }
}
