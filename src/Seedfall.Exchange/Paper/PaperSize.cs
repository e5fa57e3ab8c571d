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
    public static string Text { get; } = Embedded.Text("paper.css");

    /// <summary>The rule that sets the sheet's size.</summary>
    public static string Page(PaperSize size) => size == PaperSize.A4 ? "@page{size:A4}" : "@page{size:letter}";
}
