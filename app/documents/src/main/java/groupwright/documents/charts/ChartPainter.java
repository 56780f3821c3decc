package groupwright.documents.charts;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Objects;

/** Paints charts with their titles, in windows and as pictures. */
public final class ChartPainter {
    private static final double TITLE_BASELINE = 13;
    private static final double TITLE_HEIGHT = 28;
    private static final double TITLE_GAP = 9;
    private static final double CAPTION_LINE = 17;

    private final Lettering lettering;
    private final Palette palette;

    public ChartPainter(Lettering lettering, Palette palette) {
        this.lettering = Objects.requireNonNull(lettering, "lettering");
        this.palette = Objects.requireNonNull(palette, "palette");
    }

    /** Room for a chart with its title, at scale 1; wider than asked for where the chart needs it. */
    public ChartSize size(Chart chart, double width) {
        ChartSize body = chart.size(lettering, width);
        return new ChartSize(body.width(), body.height() + titleHeight(chart, body.width()));
    }

    private double captionX(Chart chart) {
        return Lettered.TITLE.width(chart.title(), lettering) + TITLE_GAP;
    }

    /** A caption that does not fit beside the title stands below it. */
    private boolean captionFits(Chart chart, double width) {
        return captionX(chart) + Lettered.CAPTION.width(chart.caption(), lettering) <= width;
    }

    private double titleHeight(Chart chart, double width) {
        return captionFits(chart, width) ? TITLE_HEIGHT : TITLE_HEIGHT + CAPTION_LINE;
    }

    /**
     * Paints a chart with its title from the origin; what lies under it stays.
     *
     * @param width what there is, at scale 1
     * @param scale 2 paints everything twice as large
     */
    public void paint(Graphics2D target, Chart chart, double width, double scale) {
        Graphics2D graphics = (Graphics2D) target.create();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            graphics.scale(scale, scale);
            Pen pen = new Pen(graphics, lettering, palette);
            double room = chart.size(lettering, width).width();
            title(pen, chart, room);
            graphics.translate(0, titleHeight(chart, room));
            chart.paint(pen, room);
        } finally {
            graphics.dispose();
        }
    }

    private void title(Pen pen, Chart chart, double width) {
        pen.text(chart.title(), 0, TITLE_BASELINE, Lettered.TITLE, palette.ink());
        if (captionFits(chart, width)) {
            pen.text(chart.caption(), captionX(chart), TITLE_BASELINE, Lettered.CAPTION, palette.muted());
        } else {
            pen.text(chart.caption(), 0, TITLE_BASELINE + CAPTION_LINE, Lettered.CAPTION, palette.muted());
        }
    }

    /** A picture of a chart with its title, on the palette's surface. */
    public BufferedImage picture(Chart chart, double width, double scale) {
        ChartSize size = size(chart, width);
        BufferedImage picture = new BufferedImage(
                (int) Math.ceil(size.width() * scale),
                (int) Math.ceil(size.height() * scale),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        try {
            graphics.setColor(palette.surface());
            graphics.fillRect(0, 0, picture.getWidth(), picture.getHeight());
            paint(graphics, chart, width, scale);
        } finally {
            graphics.dispose();
        }
        return picture;
    }
}
