package groupwright.documents.charts;

/** Room for a chart, in pixels of a screen at 100 %. */
public record ChartSize(double width, double height) {}
