package clutchwright.records.overlay;

import clutchwright.engine.genetics.LocusId;

/// One locus as the keeper wrote it into the catalogue.
///
/// @param species the short name of the species
/// @param text    in the format of the species files
public record OverlayEntry(long id, long version, String species, LocusId locus, String text) {}
