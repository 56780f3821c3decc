package groupwright.workbench.start;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;

/** Whether a window can open. Asking it is the first use of the toolkit in the process. */
public sealed interface Display {
    /** It can. */
    record Present() implements Display {}

    /** It cannot, and nothing is broken by having asked. */
    record None(String why) implements Display {}

    /** A display is named but does not answer. From now on this process cannot paint, pages neither. */
    record Dead(String why) implements Display {}

    /** Asks the toolkit. */
    static Display look() {
        try {
            if (GraphicsEnvironment.isHeadless()) {
                return new None("there is no display");
            }
            GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
            return new Present();
        } catch (HeadlessException none) {
            return new None("there is no display");
        } catch (AWTError | NoClassDefFoundError dead) {
            String name = System.getenv("DISPLAY");
            return new Dead((name == null ? "the display" : "the display " + name) + " does not answer");
        }
    }
}
