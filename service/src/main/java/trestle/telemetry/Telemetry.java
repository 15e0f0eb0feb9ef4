package trestle.telemetry;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import trestle.numeric.ImpossibleValue;

/** Rows of a log, in SI units. Columns are arrays, since a log has a hundred thousand rows. */
public final class Telemetry {
    private final double[] timeS;
    private final Map<Channel, double[]> columns;

    private Telemetry(double[] timeS, Map<Channel, double[]> columns) {
        this.timeS = timeS;
        this.columns = columns;
    }

    /**
     * Rows from columns of one length.
     *
     * @param timeS time of each row, s
     * @param columns the others, finite numbers; voltage and current are needed
     * @return the rows
     * @throws ImpossibleValue where a column is missing or of another length, or a number is not finite
     */
    public static Telemetry of(double[] timeS, Map<Channel, double[]> columns) {
        for (Channel needed : Set.of(Channel.VOLTAGE, Channel.CURRENT)) {
            if (!columns.containsKey(needed)) {
                throw new ImpossibleValue("columns", "a log needs a column of " + needed.said());
            }
        }
        Map<Channel, double[]> copies = new EnumMap<>(Channel.class);
        columns.forEach((channel, values) -> copies.put(channel, checked(channel.said(), values, timeS.length)));
        return new Telemetry(checked("time", timeS, timeS.length), copies);
    }

    private static double[] checked(String name, double[] values, int count) {
        if (values.length != count) {
            throw new ImpossibleValue(
                    name, "the column of " + name + " has " + values.length + " rows and that of time " + count);
        }
        if (!Arrays.stream(values).allMatch(Double::isFinite)) {
            throw new ImpossibleValue(name, "the column of " + name + " has something that is no number");
        }
        return values.clone();
    }

    /**
     * Rows.
     *
     * @return how many
     */
    public int count() {
        return timeS.length;
    }

    /**
     * Whether all of these were recorded.
     *
     * @param channels columns
     * @return true where none is missing
     */
    public boolean has(Channel... channels) {
        return columns.keySet().containsAll(Set.of(channels));
    }

    /**
     * Time of a row.
     *
     * @param row from 0
     * @return time, s
     */
    public double timeS(int row) {
        return timeS[row];
    }

    /**
     * A figure.
     *
     * @param channel a column that there is
     * @param row from 0
     * @return the figure, in the unit of the channel
     */
    public double at(Channel channel, int row) {
        return columns.get(channel)[row];
    }

    /**
     * Power out of the pack.
     *
     * @param row from 0
     * @return power, W
     */
    public double powerW(int row) {
        return at(Channel.VOLTAGE, row) * at(Channel.CURRENT, row);
    }

    /** The columns that there are. */
    Set<Channel> channels() {
        return columns.keySet();
    }

    /** Only these rows. */
    Telemetry rows(int[] kept) {
        Map<Channel, double[]> fewer = new EnumMap<>(Channel.class);
        columns.forEach((channel, values) -> fewer.put(channel, picked(values, kept)));
        return new Telemetry(picked(timeS, kept), fewer);
    }

    private static double[] picked(double[] values, int[] kept) {
        return Arrays.stream(kept).mapToDouble(row -> values[row]).toArray();
    }
}
