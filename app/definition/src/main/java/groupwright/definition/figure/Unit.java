package groupwright.definition.figure;

/**
 * The unit of an answer, as it is shown.
 *
 * @param symbol for example {@code rpm}; empty for a bare count or ratio
 */
public record Unit(String symbol) {
    public static final Unit NONE = new Unit("");
    public static final Unit PERCENT = new Unit("%");
    public static final Unit METRE = new Unit("m");
    public static final Unit MILLIMETRE = new Unit("mm");
    public static final Unit RPM = new Unit("rpm");
    public static final Unit KILOMETRES_PER_HOUR = new Unit("km/h");
    public static final Unit GRAM = new Unit("g");
    public static final Unit TEETH = new Unit("teeth");
    public static final Unit SECOND = new Unit("s");
    public static final Unit PER_TURN = new Unit("1/turn");
    public static final Unit PER_HOUR = new Unit("1/h");
    public static final Unit KILOJOULE = new Unit("kJ");
    public static final Unit INCH = new Unit("in");
    public static final Unit DEGREE = new Unit("°");
    public static final Unit LINKS = new Unit("links");
    public static final Unit NEWTON = new Unit("N");
    public static final Unit WATT = new Unit("W");
    public static final Unit JOULE_PER_KILOMETRE = new Unit("J/km");

    /** Stands in the description of a figure whose answers carry the code of the project's currency. */
    public static final Unit CURRENCY = new Unit("currency");

    /** Stands in the description of a figure whose answers carry the unit that a record states. */
    public static final Unit AS_RECORDED = new Unit("as recorded");

    @Override
    public String toString() {
        return symbol;
    }
}
