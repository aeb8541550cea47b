package clutchwright.app.collection;

/// Words that lead to a page of this site.
public record Link(String text, String path) {}
