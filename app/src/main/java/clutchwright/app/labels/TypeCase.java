package clutchwright.app.labels;

/// The two faces that labels are set in.
record TypeCase(Typeface plain, Typeface strong) implements AutoCloseable {

    static TypeCase open() {
        return new TypeCase(Typeface.plain(), Typeface.strong());
    }

    Typeface face(boolean isStrong) {
        return isStrong ? strong : plain;
    }

    @Override
    public void close() {
        plain.close();
        strong.close();
    }
}
