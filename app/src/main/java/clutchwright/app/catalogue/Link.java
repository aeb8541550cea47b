package clutchwright.app.catalogue;

/// Words that lead to a page of this site.
public record Link(String text, String path) {}
