package quadmean.field;

import java.util.Arrays;

/** Numbers of 64 bits seen so far; emptied without a pass over it. */
final class NumberSet {
    private long[] numbers = new long[256];
    private int[] rounds = new int[256];
    private int round = 1;
    private int size;

    void clear() {
        round++;
        size = 0;
    }

    /** Whether a number is new; it is then kept. */
    boolean add(long number) {
        if (2 * size >= numbers.length) {
            grow();
        }
        int at = slot(number);
        while (rounds[at] == round) {
            if (numbers[at] == number) {
                return false;
            }
            at = (at + 1) & (numbers.length - 1);
        }
        numbers[at] = number;
        rounds[at] = round;
        size++;
        return true;
    }

    private int slot(long number) {
        return (int) ((number * 0x9E3779B97F4A7C15L) >>> 32) & (numbers.length - 1);
    }

    private void grow() {
        long[] old = numbers;
        int[] oldRounds = rounds;
        int before = round;
        numbers = new long[2 * old.length];
        rounds = new int[2 * old.length];
        Arrays.fill(rounds, 0);
        round = 1;
        size = 0;
        for (int i = 0; i < old.length; i++) {
            if (oldRounds[i] == before) {
                add(old[i]);
            }
        }
    }
}
