package clutchwright.records.store;

/// The machine or the disk failed, or the file is not one of ours. What was asked for in the same
/// transaction was not done.
public final class StoreFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public StoreFailure(String message) {
        super(message);
    }

    public StoreFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
