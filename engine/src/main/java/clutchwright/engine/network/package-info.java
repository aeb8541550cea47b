/// Chances on a network of small variables that tables tie together. The front door is
/// [clutchwright.engine.network.JunctionTree].
///
/// Nothing here knows genetics: a variable has a few states, a table gives each combination of
/// the states of a few variables a weight, and the chance of a combination of all of them is
/// the product of its weights over the sum of all products.
///
/// ```
/// FactorNetwork = states a variable, weights*, ties*
/// Solution      = Solved | Impossible(Where) | TooWide | Stopped
/// Quality       = Exact | Estimated(largest error) | Sampled(largest standard error)
/// ```
package clutchwright.engine.network;
