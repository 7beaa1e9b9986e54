package quadmean.measure;

/** Whether several readings of a tree share their distance. */
public enum DistanceUse {
    /** Read again from one spot: an error of the distance is in all of them alike and does not average out. */
    ONE_DISTANCE,
    /** Each with its own distance: all errors average out. */
    OWN_DISTANCES
}
