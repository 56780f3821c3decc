package groupwright.drivetrain.search;

/**
 * Whole numbers from one to another, both included.
 *
 * @param least the smallest of them
 * @param most the largest of them
 */
public record Span(int least, int most) {
    /** Throws {@link Contradiction} if it ends before it begins. */
    public Span {
        if (most < least) {
            throw new Contradiction(
                    "a range from %d to %d ends before it begins; write the smaller number first", least, most);
        }
    }

    /** One number. */
    public static Span of(int number) {
        return new Span(number, number);
    }

    boolean holds(int number) {
        return least <= number && number <= most;
    }

    boolean isOne() {
        return least == most;
    }

    int size() {
        return most - least + 1;
    }
}
