/// Measures too long or too noisy for the tests. The front door is [clutchwright.bench.Bench].
@org.jspecify.annotations.NullMarked
package clutchwright.bench;
