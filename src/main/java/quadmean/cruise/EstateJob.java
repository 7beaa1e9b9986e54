package quadmean.cruise;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import quadmean.design.Design;
import quadmean.model.EstateStand;

/** What all who work on an estate at the same time know of it; nothing of it changes. */
final class EstateJob {
    private final Design design;
    private final WoodBooks books;
    private final List<EstateStand> stands;
    private final Map<String, Integer> byCode = new HashMap<>();
    private final List<String> regions;
    private final int[] regionOf;

    EstateJob(Design design, List<EstateStand> stands) {
        this.design = design;
        this.books = WoodBooks.of(design);
        this.stands = List.copyOf(stands);
        TreeSet<String> names = new TreeSet<>();
        stands.forEach(s -> names.add(s.region()));
        this.regions = List.copyOf(names);
        this.regionOf = new int[stands.size()];
        Map<String, Integer> numbers = new HashMap<>();
        regions.forEach(region -> numbers.put(region, numbers.size()));
        for (int i = 0; i < regionOf.length; i++) {
            byCode.put(stands.get(i).code(), i);
            regionOf[i] = numbers.getOrDefault(stands.get(i).region(), 0);
        }
    }

    Design design() {
        return design;
    }

    WoodBooks books() {
        return books;
    }

    List<EstateStand> stands() {
        return stands;
    }

    /** Number of a stand; -1 for none of that name. */
    int stand(String code) {
        return byCode.getOrDefault(code, -1);
    }

    /** The regions in the order of their names. */
    List<String> regions() {
        return regions;
    }

    int regionOf(int stand) {
        return regionOf[stand];
    }

    int attributes() {
        return design.attributes().size();
    }
}
