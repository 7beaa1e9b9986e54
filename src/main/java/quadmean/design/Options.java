package quadmean.design;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Words that a design may choose from. */
final class Options {
    private Options() {}

    static <T> Map<String, T> of(T[] values, Function<T, String> word) {
        return of(List.of(values), word);
    }

    static <T> Map<String, T> of(List<T> values, Function<T, String> word) {
        Map<String, T> map = new LinkedHashMap<>();
        values.forEach(v -> map.put(word.apply(v), v));
        return map;
    }
}
