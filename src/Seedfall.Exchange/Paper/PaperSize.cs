using Seedfall.Exchange.Catalog;

namespace Seedfall.Exchange.Paper;

/// <summary>The sheet a page is printed on.</summary>
public enum PaperSize
{
    Letter,
    A4,
}

/// <summary>The one style sheet of everything on paper.</summary>
public static class PaperCss
{
    /// <summary>The style sheet's text.</summary>
    public static string Text { get; } = Embedded.Text("paper.css") + Embedded.Text("paper-records.css");

    /// <summary>The rule that sets the sheet's size.</summary>
    public static string Page(PaperSize size, bool landscape = false) => $"@page{{size:{(size == PaperSize.A4 ? "A4" : "letter")}{(landscape ? " landscape" : "")}}}";
}
