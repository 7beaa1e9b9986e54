package quadmean.design;

import java.util.List;

/**
 * A crew and the plots that it ran.
 *
 * @param name what to call it
 * @param plots numbers of its plots
 */
public record Crew(String name, List<String> plots) {
    public Crew {
        plots = List.copyOf(plots);
    }
}
