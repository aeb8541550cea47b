package clutchwright.app.web;

/// The screens, in the order in which the frame lists them.
public enum Section {
    TODAY("Today", "/"),
    COLLECTION("Collection", "/collection"),
    SEASON("Season", "/season"),
    EGGS("Eggs", "/eggs"),
    PROJECTS("Projects", "/projects"),
    PROOFS("Proofs", "/proofs"),
    CATALOGUE("Catalogue", "/catalogue"),
    SETTINGS("Settings", "/settings");

    private final String title;
    private final String path;

    Section(String title, String path) {
        this.title = title;
        this.path = path;
    }

    public String title() {
        return title;
    }

    public String path() {
        return path;
    }
}
