/// A made-up breeder, so that every screen can be tried: six seasons at Millrace, a house that does
/// not exist, with hatchlings drawn by true genetics. The front door is
/// [clutchwright.app.demo.DemoHouse].
@NullMarked
package clutchwright.app.demo;

import org.jspecify.annotations.NullMarked;
