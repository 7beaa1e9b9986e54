package quadmean.height;

/** Whose heights a curve was fitted to. */
public enum CurveScope {
    SPECIES,
    GROUP,
    /** All species together. */
    POOLED
}
