package groupwright.definition.figures;

import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.prediction.CadenceUse;
import groupwright.drivetrain.prediction.GearUse;
import groupwright.drivetrain.prediction.Prediction;
import groupwright.drivetrain.quantity.ChainPitch;
import groupwright.drivetrain.wear.GearWork;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/**
 * The sums of one predicted ride. The figure {@code ride} gives them as a list, each position ending in its own unit, so
 * that the ledger keeps one prediction for all figures taken from it.
 */
public final class RideSums {
    private static final String LENGTH = "length_m";
    private static final String TIME = "time_s";
    private static final String COASTING = "coasting_s";
    private static final String WALKING = "walking_s";
    private static final String COMFORTABLE = "comfortable_s";
    private static final String GRINDING = "grinding_s";
    private static final String ACTIONS = "shift-actions";
    private static final String COGS = "cogs-shifted";
    private static final String FRONT = "front-shifts";
    private static final String WORK = "work_J";
    private static final String CADENCE = "cadence-";
    private static final double S_PER_HOUR = 3600;

    private final Map<String, Double> sums = new LinkedHashMap<>();

    private RideSums() {}

    static RideSums of(Prediction ride) {
        RideSums all = new RideSums();
        all.sums.put(LENGTH, ride.lengthM());
        all.sums.put(TIME, ride.timeS());
        all.sums.put(COASTING, ride.coastingS());
        all.sums.put(WALKING, ride.walkingS());
        all.sums.put(COMFORTABLE, ride.cadence().comfortableS());
        all.sums.put(GRINDING, ride.cadence().grindingS());
        all.sums.put(ACTIONS, (double) ride.shifts().actions());
        all.sums.put(COGS, (double) ride.shifts().cogs());
        all.sums.put(FRONT, (double) ride.shifts().front());
        all.sums.put(WORK, ride.energy().crankJ());
        ride.gearUse().forEach(all::put);
        List<Double> bins = ride.cadence().binS();
        for (int i = 0; i < bins.size(); i++) {
            all.sums.put(CADENCE + bin(i) + "." + TIME, bins.get(i));
        }
        return all;
    }

    private void put(GearUse use) {
        String gear = name(use.gear()) + ".";
        sums.put(gear + TIME, use.timeS());
        sums.put(gear + "distance_m", use.distanceM());
        sums.put(gear + WORK, use.crankWorkJ());
        sums.put(gear + "turns", use.crankTurns());
    }

    private static String bin(int number) {
        int width = (int) CadenceUse.BIN_RPM;
        return number * width + "-" + (number + 1) * width;
    }

    /** A gear as positions name it, for example {@code 32/10}. */
    static String name(Gear gear) {
        return gear.ring().teeth() + "/" + gear.cog().teeth();
    }

    /** Reads the answer of the figure {@code ride}. */
    public static RideSums of(Series answer) {
        RideSums all = new RideSums();
        answer.values().forEach(at -> all.sums.put(at.at(), at.value()));
        return all;
    }

    Series series() {
        List<Series.At> values = new ArrayList<>();
        sums.forEach((at, value) -> values.add(new Series.At(at, value)));
        return new Series(Unit.NONE, values);
    }

    /** Length in km. */
    public double lengthKm() {
        return sums.get(LENGTH) / 1000;
    }

    /** Time in hours. */
    public double hours() {
        return sums.get(TIME) / S_PER_HOUR;
    }

    /** Mean speed in km/h, walking included. */
    public double averageKmh() {
        return lengthKm() / hours();
    }

    /** Share of the time pedalled or walked that was pedalled within the preferred cadences; 100 for coasting only. */
    public double comfortPct() {
        double effort = sums.get(TIME) - sums.get(COASTING);
        return effort > 0 ? 100 * Math.min(1, sums.get(COMFORTABLE) / effort) : 100;
    }

    /** Shift actions for each hour of the ride. */
    public double shiftsPerHour() {
        return sums.get(ACTIONS) / hours();
    }

    /** Cogs moved for each hour of the ride. */
    public double cogsPerHour() {
        return sums.get(COGS) / hours();
    }

    /** Front shifts for each hour of the ride. */
    public double frontShiftsPerHour() {
        return sums.get(FRONT) / hours();
    }

    /** Share of the ride's time on foot. */
    public double walkingPct() {
        return 100 * sums.get(WALKING) / sums.get(TIME);
    }

    /** Share of the ride's time pedalled below the least cadence. */
    public double grindingPct() {
        return 100 * sums.get(GRINDING) / sums.get(TIME);
    }

    /** Work at the crank in kJ. */
    public double workKj() {
        return sums.get(WORK) / 1000;
    }

    /** Work at the crank in each gear. */
    List<GearWork> gearWork() {
        List<GearWork> works = new ArrayList<>();
        forGears(WORK, (gear, work) -> works.add(new GearWork(gear, work)));
        return works;
    }

    /** Chain that has run over the ring while pedalling, in m: turns of the crank · teeth of the ring · pitch. */
    double chainTravelM() {
        double[] travel = new double[1];
        forGears("turns", (gear, turns) -> travel[0] += turns * gear.ring().teeth() * ChainPitch.BICYCLE_MM / 1000);
        return travel[0];
    }

    private void forGears(String what, BiConsumer<Gear, Double> each) {
        String ending = "." + what;
        sums.forEach((at, sum) -> {
            if (isOf(at, "/", ending)) {
                String[] wheels = at.substring(0, at.length() - ending.length()).split("/");
                each.accept(Gear.of(Integer.parseInt(wheels[0]), Integer.parseInt(wheels[1])), sum);
            }
        });
    }

    /** Shares of the gears in the sum of what this ending names, for example {@code turns}; all 0 without pedalling. */
    Series gearShares(String ending) {
        return shares("/", "." + ending);
    }

    /** Shares of the cadences in the time pedalled; empty without pedalling. */
    Series cadenceShares() {
        return shares(CADENCE, "." + TIME);
    }

    private Series shares(String mark, String ending) {
        double total = 0;
        for (Map.Entry<String, Double> sum : sums.entrySet()) {
            total += isOf(sum.getKey(), mark, ending) ? sum.getValue() : 0;
        }
        List<Series.At> values = new ArrayList<>();
        for (Map.Entry<String, Double> sum : sums.entrySet()) {
            String at = sum.getKey();
            if (isOf(at, mark, ending)) {
                String name = at.substring(at.startsWith(mark) ? mark.length() : 0, at.length() - ending.length());
                values.add(new Series.At(name, total > 0 ? 100 * sum.getValue() / total : 0));
            }
        }
        return new Series(Unit.PERCENT, values);
    }

    private static boolean isOf(String at, String mark, String ending) {
        return at.contains(mark) && at.endsWith(ending);
    }
}
