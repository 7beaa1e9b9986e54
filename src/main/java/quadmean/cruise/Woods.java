package quadmean.cruise;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quadmean.design.Design;
import quadmean.estimate.CountedStem;
import quadmean.estimate.Stem;
import quadmean.height.HeightFiller;
import quadmean.height.HeightedTree;
import quadmean.model.BiomassSpec;
import quadmean.model.CountedTrees;
import quadmean.model.GreenWeight;
import quadmean.model.HeightSource;
import quadmean.model.Scaling;
import quadmean.model.Tree;
import quadmean.model.TreeDetail;
import quadmean.model.TreeStatus;
import quadmean.model.VolumeSpec;
import quadmean.units.Attribute;
import quadmean.volume.BiomassEquation;
import quadmean.volume.TreeEquation;
import quadmean.volume.TreeWood;

/** The wood of trees, one by one, with an account of what it was worked out with and of what could not be. */
final class Woods {
    private final Design design;
    private final WoodBooks books;
    private final StemCutter cutter;
    private final double carbonShare;
    private final WoodAccount account = new WoodAccount();
    private final Map<TreeStatus, Set<Attribute>> countsOfBig = new EnumMap<>(TreeStatus.class);
    private final Map<TreeStatus, Set<Attribute>> countsOfSmall = new EnumMap<>(TreeStatus.class);
    private final Map<String, VolumeSpec> volumes = new TreeMap<>();
    private final Map<String, VolumeSpec> boardFeet = new TreeMap<>();
    private final Map<String, BiomassSpec> biomass = new TreeMap<>();
    private final Map<String, GreenWeight> greenWeights = new TreeMap<>();

    Woods(Design design, WoodBooks books, HeightFiller curves) {
        this.design = design;
        this.books = books;
        this.carbonShare = design.wood().carbon().map(c -> c.share()).orElse(Double.NaN);
        this.cutter = new StemCutter(design, books, curves, account);
    }

    /** What the estimate needs of a tree. */
    Stem stem(HeightedTree heighted) {
        Tree tree = heighted.tree();
        Set<Attribute> counts = counts(tree);
        return new Stem(
                tree.species(),
                tree.dbhCm(),
                heighted.heightM(),
                wood(heighted, counts),
                tree.detail().times(),
                counts,
                tree.detail().prediction());
    }

    /** The attributes that a tree counts in: the same for all trees of a status above the merchantable size, and below it. */
    private Set<Attribute> counts(Tree tree) {
        TreeStatus status = tree.detail().status();
        boolean isBig = tree.dbhCm() >= design.counting().minMerchantableCm();
        return (isBig ? countsOfBig : countsOfSmall)
                .computeIfAbsent(
                        status,
                        s -> Stream.of(Attribute.values())
                                .filter(a -> design.counting().counts(a, s, tree.dbhCm()))
                                .collect(Collectors.toUnmodifiableSet()));
    }

    /** What the estimate needs of trees that were counted and not measured. */
    CountedStem counted(CountedTrees trees) {
        TreeDetail detail = trees.detail();
        Set<Attribute> counts = Stream.of(Attribute.TREES, Attribute.BASAL_AREA)
                .filter(a -> design.counting().counts(a, detail.status(), Double.NaN))
                .collect(Collectors.toSet());
        return new CountedStem(trees.species(), detail.times(), counts, detail.prediction());
    }

    private TreeWood wood(HeightedTree heighted, Set<Attribute> counts) {
        Tree tree = heighted.tree();
        double dry = counts.contains(Attribute.BIOMASS) ? dryKg(tree) : 0;
        double carbon = dry * carbonShare;
        if (!counts.contains(Attribute.VOLUME)) {
            return new TreeWood(0, OptionalDouble.empty(), 0, List.of(), dry, 0, carbon);
        }
        double volume = volume(heighted);
        OptionalDouble feet = books.boardFeet().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(feet(heighted));
        double greenFactor = greenKgPerM3(tree);
        return new TreeWood(
                volume,
                feet,
                tree.detail().defect(),
                cutter.logs(heighted, greenFactor),
                dry,
                volume * greenFactor,
                carbon);
    }

    private double greenKgPerM3(Tree tree) {
        Optional<GreenWeight> green = books.greenWeights().find(tree.species());
        if (green.isEmpty()) {
            return books.greenWeights().isEmpty()
                    ? Double.NaN
                    : account.missing(Attribute.GREEN_WEIGHT, "no green weight for " + tree.species());
        }
        greenWeights.put(tree.species(), green.get());
        return green.get().kgPerM3();
    }

    private double volume(HeightedTree heighted) {
        Tree tree = heighted.tree();
        Optional<TreeEquation> equation = books.volumes().find(tree.species());
        if (equation.isEmpty()) {
            return Double.NaN;
        }
        volumes.put(tree.species(), equation.get().spec());
        return value(equation.get(), heighted, Attribute.VOLUME);
    }

    private double feet(HeightedTree heighted) {
        Tree tree = heighted.tree();
        Optional<TreeEquation> equation = books.boardFeet().find(tree.species());
        if (equation.isEmpty()) {
            account.missing(Attribute.BOARD_FEET, "no equation of board feet for " + tree.species());
            return Double.NaN;
        }
        boardFeet.put(tree.species(), equation.get().spec());
        boolean none = tree.detail().logs().orElse(Double.NaN) == 0;
        return none ? 0 : value(equation.get(), heighted, Attribute.BOARD_FEET);
    }

    /** By the equation; 0 with a note where it gives nothing, NaN with a reason where something is not known of the tree. */
    private double value(TreeEquation equation, HeightedTree heighted, Attribute attribute) {
        Tree tree = heighted.tree();
        double logs = tree.detail().logs().orElse(Double.NaN);
        double height = heighted.source() == HeightSource.NONE ? Double.NaN : heighted.heightM();
        account.range(equation.spec().source(), equation.spec().range(), tree, height);
        double value = equation.volume(tree.dbhCm(), height, logs);
        if (!Double.isNaN(value)) {
            return value;
        }
        TreeEquation.Gap gap = equation.gap(tree.dbhCm(), height, logs).orElseThrow();
        return switch (gap) {
            case NO_HEIGHT -> account.missing(attribute, "no height and no height curve for " + tree.species());
            case NO_LOGS ->
                account.missing(
                        attribute,
                        "no number of 16-ft logs on some trees of " + tree.species()
                                + " (write 0 where there is none)");
            case NO_PROFILE, OUTSIDE_TABLE, NOT_POSITIVE -> account.withoutValue(attribute, gap, tree);
        };
    }

    private double dryKg(Tree tree) {
        Optional<BiomassSpec> spec = books.biomass().find(tree.species());
        if (spec.isEmpty()) {
            return books.biomass().isEmpty()
                    ? Double.NaN
                    : account.missing(Attribute.BIOMASS, "no biomass equation for " + tree.species());
        }
        biomass.put(tree.species(), spec.get());
        account.range(spec.get().provenance().source(), spec.get().range(), tree, Double.NaN);
        return BiomassEquation.of(spec.get()).dryKg(tree.dbhCm());
    }

    WoodUsed used() {
        return new WoodUsed(
                new TreeMap<>(volumes),
                new TreeMap<>(boardFeet),
                new TreeMap<>(cutter.used()),
                design.wood().logs().flatMap(l -> l.scaling()).map(Scaling::rule),
                design.wood().prices(),
                new TreeMap<>(biomass),
                new TreeMap<>(greenWeights),
                design.wood().carbon());
    }

    /** For attributes that are not known, why. */
    Map<Attribute, String> missing() {
        noteNoEquation();
        return account.missing();
    }

    /** The same reasons one by one. */
    Map<Attribute, Set<String>> reasons() {
        noteNoEquation();
        return account.reasons();
    }

    private void noteNoEquation() {
        if (books.volumes().isEmpty()) {
            account.missing(Attribute.VOLUME, "the design has no volume equation");
        }
    }

    List<String> notes() {
        return account.notes();
    }

    /** What is odd about the trees since the last call, for those who count such trees and name none. */
    List<String> takeRemarks() {
        return account.takeRemarks();
    }
}
