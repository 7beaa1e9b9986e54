/** The tract on the map: boundaries into geometry in metres, areas, where plots lie and how to walk to them, and what the crew needs there. */
@org.jspecify.annotations.NullMarked
package quadmean.layout;
