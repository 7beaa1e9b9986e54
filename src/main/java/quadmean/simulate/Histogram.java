package quadmean.simulate;

import java.util.List;

/**
 * How estimates were spread: classes of equal width, the first and last holding all beyond as well.
 *
 * @param low lower end of the first class
 * @param width width of a class
 * @param counts cruises in each class
 */
public record Histogram(double low, double width, List<Long> counts) {
    public Histogram {
        counts = List.copyOf(counts);
    }
}
