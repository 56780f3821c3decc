package groupwright.documents.project;

/** A column of the table of gear paths. */
enum GearPath {
    CAGE("gearPaths.cage", "cage-angles", "", "", WorstIs.LEAST),
    GAP("gearPaths.gap", "pulley-gaps", "pulley-gap", "gearPaths.leastGap", WorstIs.LEAST),
    FREE("gearPaths.free", "free-chains", "free-chain", "gearPaths.leastFree", WorstIs.LEAST),
    TEETH("gearPaths.teeth", "contact-teeth-each", "contact-teeth", "gearPaths.leastTeeth", WorstIs.LEAST),
    SLANT("gearPaths.slant", "chain-angles", "chain-angle of=worst", "gearPaths.mostSlant", WorstIs.MOST);

    /** Which end is the bad one. */
    enum WorstIs {
        LEAST,
        MOST
    }

    private final String head;
    private final String each;
    private final String worst;
    private final String remark;
    private final WorstIs worstIs;

    GearPath(String head, String each, String worst, String remark, WorstIs worstIs) {
        this.head = head;
        this.each = each;
        this.worst = worst;
        this.remark = remark;
        this.worstIs = worstIs;
    }

    /** Key of the column's head. */
    String head() {
        return head;
    }

    /** The figure of each gear. */
    String each() {
        return each;
    }

    /** Whether one gear is worse than the others; a cage angle is neither good nor bad. */
    boolean hasWorst() {
        return !worst.isEmpty();
    }

    /** The figure of the worst gear. */
    String worst() {
        return worst;
    }

    /** Key of the words behind the worst gear. */
    String remark() {
        return remark;
    }

    WorstIs worstIs() {
        return worstIs;
    }
}
