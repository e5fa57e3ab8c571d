using System.Globalization;
using System.Text;
using Seedfall.Photos.Cover;

namespace Seedfall.Fit.Cover;

/// <summary>Writes the section on green cover of <c>docs/validation.md</c> and leaves the other sections alone.</summary>
internal static class CoverPage
{
    private const string Heading = "## Green cover from photographs";

    internal static string Line(LeftOutCover o) => string.Create(
        CultureInfo.InvariantCulture, $"| {o.Photograph.Name}{(o.Photograph.IsMaskWhole ? "" : " (1)")} | {P(o.Photograph.Truth)} | {P(o.ExcessGreenShare)} | {P(o.Plain.Cover)} | {P(o.Plain.Low)} to {P(o.Plain.High)} | {P(o.Tapped.Cover)} | {P(o.Tapped.Low)} to {P(o.Tapped.High)} | {string.Join(", ", o.Plain.Flags)} |");

    internal static void Write(string file, CoverModel model, IReadOnlyList<LeftOutCover> outcomes)
    {
        var text = File.ReadAllText(file);
        var start = text.IndexOf(Heading, StringComparison.Ordinal);
        start = start < 0 ? text.Length : start;
        var next = start < text.Length ? text.IndexOf("\n## ", start + Heading.Length, StringComparison.Ordinal) : -1;
        File.WriteAllText(file, text[..start].TrimEnd() + "\n\n" + Section(model, outcomes) + (next < 0 ? string.Empty : text[next..]));
    }

    private static string Section(CoverModel model, IReadOnlyList<LeftOutCover> outcomes)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            {Heading}

            Fitted {model.Fitted:yyyy-MM-dd}. {outcomes.Count} field photographs of young grass-like cereal stands with hand-made masks (the Eschikon wheat
            segmentation set of ETH Zurich, CC BY-SA 4.0; not part of this project). Each is measured with everything fitted without it;
            its range, too, comes from the other photographs. Some show the same plot on another day. They are not lawns: what was tried on
            composed lawn scenes of known cover is under `tests/Seedfall.Photos.Tests/Cover`. The form of the measure was chosen looking at
            these left-out errors, so they flatter it a little.

            Rerun: `dotnet run -c Release --project bench/Seedfall.Fit -- cover --date {model.Fitted:yyyy-MM-dd}` (fits, writes `data/green-cover.json`, this
            section, and overlays of every photograph to `out/validation/cover`, where they stay: the license of the photographs
            does not let them be committed here). Measure any photograph: `seedfall cover FILE... --json`.

            | measure | mean absolute error, points of cover | without (1) | worst | inside its 90 % range |
            | --- | --- | --- | --- | --- |

            """);
        Summary(page, outcomes, "excess green above 0.10", o => o.ExcessGreenShare, null);
        Summary(page, outcomes, "ratio rule (R/G, B/G < 0.95, 2G - R - B > 20)", o => o.RatioShare, null);
        Summary(page, outcomes, "Seedfall, no taps", o => o.Plain.Cover, o => o.Plain);
        Summary(page, outcomes, "Seedfall, ten taps", o => o.Tapped.Cover, o => o.Tapped);
        var orders = Enumerable.Range(0, LeftOutCover.Orders).Select(k => outcomes.Select(o => (o.Photograph.IsMaskWhole, Error: 100.0 * Math.Abs(o.Otherwise[k] - o.Photograph.Truth))).ToList()).ToList();
        var (all, whole) = (orders.Select(o => o.Average(e => e.Error)).ToList(), orders.Select(o => o.Where(e => e.IsMaskWhole).Average(e => e.Error)).ToList());
        page.Append(CultureInfo.InvariantCulture, $"""

            Ten taps tell as much as their places: with {LeftOutCover.Orders} other draws of the points asked for, the mean absolute error is {all.Min():F2} to {all.Max():F2},
            {all.Average():F2} on average; without (1) {whole.Min():F2} to {whole.Max():F2}, {whole.Average():F2} on average.

            Taps: the measure asks for one point at a time, the mask answers, wrong where a finger would be wrong too. (1) The mask of
            this photograph is empty in a frame all around and in places inside, through closed canopy: by eye its cover is near three
            quarters. It is scored but not fitted on.

            Cover in percent:

            | photograph | true | excess green | measured | 90 % range | ten taps | 90 % range | flags |
            | --- | --- | --- | --- | --- | --- | --- | --- |

            """);
        foreach (var outcome in outcomes)
        {
            page.Append(Line(outcome)).Append('\n');
        }

        return page.ToString();
    }

    private static void Summary(StringBuilder page, IReadOnlyList<LeftOutCover> outcomes, string name, Func<LeftOutCover, double> cover, Func<LeftOutCover, CoverMeasure>? range)
    {
        double Error(LeftOutCover o) => 100.0 * Math.Abs(cover(o) - o.Photograph.Truth);
        var inside = range is null ? "-" : string.Create(CultureInfo.InvariantCulture, $"{outcomes.Count(o => o.Photograph.Truth >= range(o).Low && o.Photograph.Truth <= range(o).High)} of {outcomes.Count}");
        page.Append(CultureInfo.InvariantCulture, $"| {name} | {outcomes.Average(Error):F2} | {outcomes.Where(o => o.Photograph.IsMaskWhole).Average(Error):F2} | {outcomes.Max(Error):F1} | {inside} |\n");
    }

    private static string P(double share) => (100.0 * share).ToString("F1", CultureInfo.InvariantCulture);
}
