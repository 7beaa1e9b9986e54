/** The tract on the map: boundaries into geometry in metres, areas, and where plots lie. */
@org.jspecify.annotations.NullMarked
package quadmean.layout;
