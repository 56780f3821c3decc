package groupwright.workbench.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.util.function.Supplier;

/** The two sets of colours. */
public enum Theme {
    LIGHT(FlatLightLaf::new),
    DARK(FlatDarkLaf::new);

    private final Supplier<FlatLaf> laf;

    Theme(Supplier<FlatLaf> laf) {
        this.laf = laf;
    }

    FlatLaf laf() {
        return laf.get();
    }
}
