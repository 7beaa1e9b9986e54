# Places on the UTM grid, courses and areas on the ellipsoid WGS 84, by PROJ (package sf) and geosphere.
# Rscript layout.R; the numbers stand in quadmean.layout.MapGridTest.
suppressMessages({library(geosphere); library(sf)})
cat(R.version.string, "geosphere", as.character(packageVersion("geosphere")), "sf", as.character(packageVersion("sf")),
    "PROJ", sf_extSoftVersion()[["PROJ"]], "\n")
places <- rbind(c(-121.5, 45.25), c(-114.3717, 46.8123), c(-120.001, 61.3), c(151.2, -33.9), c(-83.7532, 10), c(8.55, 47.37))
zones <- floor((places[, 1] + 180) / 6) + 1
for (i in seq_len(nrow(places))) {
  crs <- paste0("+proj=utm +zone=", zones[i], if (places[i, 2] < 0) " +south" else "", " +datum=WGS84 +units=m")
  g <- sf_project("+proj=longlat +datum=WGS84", crs, places[i, , drop = FALSE])
  cat(sprintf("%.4f,%.4f,%d,%.4f,%.4f\n", places[i, 1], places[i, 2], zones[i], g[1], g[2]))
}
from <- rbind(c(-121.5, 45.25), c(-114.3717, 46.8123), c(-120, 61.3), c(151.2, -33.9))
to <- rbind(c(-121.49, 45.26), c(-114.3717, 46.8223), c(-120.01, 61.3), c(151.19, -33.91))
for (i in 1:4) cat(sprintf("%.6f,%.8f\n", distGeo(from[i, ], to[i, ]), (bearing(from[i, ], to[i, ]) + 360) %% 360))
# a polygon with a hole, straight between its corners on an equal-area map, which computes areas another way
outer <- rbind(c(-114.40, 46.80), c(-114.36, 46.805), c(-114.35, 46.83), c(-114.39, 46.84), c(-114.40, 46.80))
hole <- rbind(c(-114.38, 46.815), c(-114.38, 46.82), c(-114.37, 46.82), c(-114.37, 46.815), c(-114.38, 46.815))
map <- "+proj=laea +lat_0=46.82 +lon_0=-114.375 +datum=WGS84 +units=m"
flat <- function(ring) sf_project("+proj=longlat +datum=WGS84", map, ring)
cat(sprintf("%.3f m2\n", as.numeric(st_area(st_polygon(list(flat(outer), flat(hole)))))))
