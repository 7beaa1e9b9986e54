package quadmean.model;

/** An equation by which something of a tree follows from its size, as a design or the library states it. */
public sealed interface EquationSpec permits VolumeSpec, BiomassSpec {
    /** Species code, group, or {@code *} for all the rest. */
    String code();

    /** Sizes of the trees that it was fitted to. */
    ValidRange range();

    /** Where the coefficients come from. */
    Provenance provenance();

    /** Its name in the library; empty if the design states it. */
    String library();
}
