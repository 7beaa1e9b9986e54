package quadmean.stats;

/** Random numbers by counting and mixing (Steele, Lea and Flood 2014, from memory): streams for any number of resamples, no objects. */
public final class RandomStream {
    /** What a state grows by before each number. */
    static final long STEP = 0x9E3779B97F4A7C15L;

    private RandomStream() {}

    /** The first state of one of the streams of a seed. */
    static long state(long seed, long stream) {
        return mix(after(seed) + stream * 0xD1B54A32D192ED03L);
    }

    /** A whole number from 0 to n - 1; uneven by less than n over two to the 32nd. */
    static int below(int n, long state) {
        return (int) (((mix(state) >>> 32) * n) >>> 32);
    }

    /** The number that follows a state: its bits spread over all of them, different states to different numbers. */
    public static long after(long state) {
        return mix(state + STEP);
    }

    private static long mix(long z) {
        long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
        return b ^ (b >>> 31);
    }
}
