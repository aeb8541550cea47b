/// The program that a breeder runs: pages in the browser and commands in the terminal. The front
/// door is [clutchwright.app.Clutchwright].
@org.jspecify.annotations.NullMarked
package clutchwright.app;
