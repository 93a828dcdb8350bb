package fettle.machine.trials;

/**
 * What a figure may be.
 *
 * @param low least value allowed, perhaps minus infinity [coherent]
 * @param high largest value allowed, perhaps infinity [coherent]
 * @param source where the limit comes from
 */
public record Limit(double low, double high, String source) {}
