package quadmean.cruise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import quadmean.design.Design;
import quadmean.height.HeightFiller;
import quadmean.height.HeightedTree;
import quadmean.model.HeightSource;
import quadmean.model.LogSettings;
import quadmean.model.Product;
import quadmean.model.TaperSpec;
import quadmean.model.Tree;
import quadmean.model.TreeDetail.Top;
import quadmean.units.Attribute;
import quadmean.volume.Bucked;
import quadmean.volume.Bucker;
import quadmean.volume.CutLog;
import quadmean.volume.NoLogs;
import quadmean.volume.StemProfile;
import quadmean.volume.StemToCut;
import quadmean.volume.UsableHeight;

/** Cuts the stems of a cruise into logs. */
final class StemCutter {
    private final Design design;
    private final WoodBooks books;
    private final HeightFiller curves;
    private final WoodAccount account;
    private final Map<String, TaperSpec> used = new TreeMap<>();

    StemCutter(Design design, WoodBooks books, HeightFiller curves, WoodAccount account) {
        this.design = design;
        this.books = books;
        this.curves = curves;
        this.account = account;
    }

    /** The stem profile used for each species. */
    Map<String, TaperSpec> used() {
        return used;
    }

    /** The logs of one tree; none where the design asks for none. */
    List<CutLog> logs(HeightedTree heighted, double greenKgPerM3) {
        return design.wood()
                .logs()
                .map(settings -> logs(settings, books.bucker().orElseThrow(), heighted, greenKgPerM3))
                .orElse(List.of());
    }

    private List<CutLog> logs(LogSettings settings, Bucker bucker, HeightedTree heighted, double greenKgPerM3) {
        Tree tree = heighted.tree();
        if (heighted.source() == HeightSource.NONE) {
            account.missing(Attribute.LOG_VOLUME, "no height and no height curve for " + tree.species());
            return List.of(CutLog.unknown());
        }
        books.profiles().find(tree.species()).ifPresent(t -> used.put(tree.species(), t));
        double total = wholeHeightM(heighted);
        if (books.profiles().find(tree.species()).isEmpty() && isWanted(tree)) {
            account.missing(Attribute.LOG_VOLUME, "no stem profile for " + tree.species());
            return List.of(CutLog.unknown());
        }
        Optional<StemProfile> profile = books.profiles().profile(tree.species(), tree.dbhCm(), total);
        if (profile.isEmpty()) {
            account.noLogs(NoLogs.NO_PROFILE, tree);
            return List.of();
        }
        OptionalDouble end = isBroken(heighted) ? OptionalDouble.of(heighted.heightM()) : OptionalDouble.empty();
        double top = UsableHeight.topM(
                total, end, tree.detail().merchantableM(), tree.detail().logs(), settings);
        Bucked bucked = bucker.buck(new StemToCut(
                profile.get(),
                tree.species(),
                group(tree),
                tree.detail().grade(),
                top,
                tree.detail().defect(),
                greenKgPerM3));
        bucked.reason().ifPresent(reason -> account.noLogs(reason, tree));
        bucked.logs().forEach(log -> note(log, tree));
        return bucked.logs();
    }

    /** Whether some product takes the species; a species that none takes has no logs, whatever its form. */
    private boolean isWanted(Tree tree) {
        return design.wood().logs().orElseThrow().products().stream()
                .map(Product::species)
                .anyMatch(s -> s.isEmpty() || s.contains(tree.species()) || s.contains(group(tree)));
    }

    /** A broken stem tapers as if it were whole: to the height that the curve gives a tree of its dbh. */
    private double wholeHeightM(HeightedTree heighted) {
        double height = heighted.heightM();
        if (!isBroken(heighted)) {
            return height;
        }
        double whole = curves.fill(heighted.tree().withoutHeight()).heightM();
        return whole > height ? whole : height;
    }

    private static boolean isBroken(HeightedTree heighted) {
        boolean seen = heighted.source() == HeightSource.MEASURED || heighted.source() == HeightSource.READING;
        return seen && heighted.tree().detail().top() == Top.BROKEN;
    }

    private void note(CutLog log, Tree tree) {
        books.scale()
                .filter(s -> log.boardFeet() > 0)
                .ifPresent(s ->
                        account.log(tree.detail().count(), s.scale(log.smallEndCm(), log.largeEndCm(), log.lengthM())));
        boolean priced = design.wood()
                .prices()
                .map(p -> p.find(log.product(), tree.species(), group(tree)).isPresent())
                .orElse(true);
        if (!priced) {
            account.unpriced(log, tree);
        } else if (design.wood().prices().isPresent() && Double.isNaN(log.value())) {
            account.missing(Attribute.VALUE, "no green weight for " + tree.species() + ", whose price is by weight");
        }
    }

    private String group(Tree tree) {
        return books.groupOf().getOrDefault(tree.species(), "");
    }
}
