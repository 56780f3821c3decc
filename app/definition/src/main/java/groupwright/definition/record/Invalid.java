package groupwright.definition.record;

/** A value that a record refuses: which field, what is wrong with it, what to do. */
public final class Invalid extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final String wrong;
    private final String remedy;

    /**
     * @param field path of the field inside the record, for example {@code criteria.k1.target}
     * @param wrong what is wrong, without a full stop
     * @param remedy what to do, without a full stop
     */
    public Invalid(String field, String wrong, String remedy) {
        super((field.isEmpty() ? "" : field + ": ") + wrong + "; " + remedy);
        this.field = field;
        this.wrong = wrong;
        this.remedy = remedy;
    }

    public String field() {
        return field;
    }

    public String wrong() {
        return wrong;
    }

    public String remedy() {
        return remedy;
    }

    /** The same refusal seen from one level further out. */
    public Invalid inside(String outer) {
        return new Invalid(field.isEmpty() ? outer : outer + "." + field, wrong, remedy);
    }
}
