/// To be filled.
@org.jspecify.annotations.NullMarked
package clutchwright.bench;
