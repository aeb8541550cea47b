package clutchwright.app.catalogue;

/// An own gene that the catalogue cannot take, with the first reason why.
///
/// @param path where its text can be mended
public record UnreadLine(String locus, String why, String path) {}
