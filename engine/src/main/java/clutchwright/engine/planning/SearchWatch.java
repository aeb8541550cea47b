package clutchwright.engine.planning;

/// Hears how a search gets on, and may end it with the best found so far.
public interface SearchWatch {

    SearchWatch NONE = (weighed, routes) -> true;

    /// @param weighed how many ways to come by an animal so far
    /// @param routes how many led to the goal so far
    /// @return whether to go on
    boolean goOn(int weighed, int routes);
}
