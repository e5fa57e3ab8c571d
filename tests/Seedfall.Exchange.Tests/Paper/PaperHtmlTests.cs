using System.Collections;
using System.Reflection;
using System.Text.RegularExpressions;
using Seedfall.Engine.Workings;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Tests.Paper;

public sealed partial class PaperHtmlTests
{
    public static TheoryData<string> Lawns => ["ordinary", "dry", "waiting"];

    [Theory]
    [MemberData(nameof(Lawns))]
    public async Task Nothing_is_fetched_and_nothing_runs(string lawn)
    {
        foreach (var html in new[] { await PaperHtml.FullPlan(Plan(lawn)), await PaperHtml.Handout(Plan(lawn)) })
        {
            var body = html[html.IndexOf("<body>", StringComparison.Ordinal)..];
            Assert.DoesNotContain("<script", body);
            Assert.DoesNotContain(" style=", body);
            Assert.DoesNotContain("src=", body);
            Assert.DoesNotContain("http", body.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal));
            Assert.False(EventAttribute().IsMatch(body), "an event attribute");
            Assert.DoesNotContain("url(", html);
        }
    }

    [Fact]
    public async Task What_people_typed_is_shown_as_text_never_as_markup()
    {
        var plan = DemoPlan.Ordinary with { LawnName = "<script>alert('x')</script> & <b>\"lawn\"</b>" };
        foreach (var html in new[] { await PaperHtml.FullPlan(plan), await PaperHtml.Handout(plan) })
        {
            Assert.DoesNotContain("<script", html);
            Assert.Contains("&lt;script&gt;", html);
        }
    }

    [Fact]
    public async Task Plans_of_every_shape_can_be_set() => await Task.WhenAll(Enumerable.Range(1, 12).Select(async seed =>
    {
        var plan = AnyRecord.One<RecoveryPlan>(seed);
        Assert.EndsWith("</html>", (await PaperHtml.FullPlan(plan)).TrimEnd(), StringComparison.Ordinal);
        Assert.EndsWith("</html>", (await PaperHtml.Handout(plan, PaperSize.A4, UnitSystem.Metric)).TrimEnd(), StringComparison.Ordinal);
    }));

    [Theory]
    [MemberData(nameof(Lawns))]
    public async Task Every_figure_of_the_plan_stands_on_the_page_with_its_working(string lawn)
    {
        var plan = Plan(lawn);
        if (plan.Seed is { Mixes.Count: 1 } seed)
        {
            plan = plan with { Seed = seed with { Mixes = [] } }; // one mix for all patches is shown as the lawn's own
        }

        var listed = PlanFigures.Of(plan).Select(f => f.Id).ToHashSet();
        var all = Figures(plan).DistinctBy(f => f.Id).ToList();
        Assert.NotEmpty(all);
        Assert.All(all, f => Assert.Contains(f.Id, listed));
        var html = await PaperHtml.FullPlan(plan);
        var workings = html[html.IndexOf("id=\"workings\"", StringComparison.Ordinal)..];
        Assert.Equal(all.Count, ListItem().Count(workings));
        Assert.All(all, f => Assert.Contains(System.Net.WebUtility.HtmlEncode(f.Working.Source).Replace("&#39;", "&#x27;", StringComparison.Ordinal), workings));
    }

    [Fact]
    public async Task The_same_plan_gives_the_same_page() =>
        Assert.Equal(await PaperHtml.FullPlan(DemoPlan.Ordinary), await PaperHtml.FullPlan(DemoPlan.Ordinary));

    [Fact]
    public async Task Ids_on_the_page_are_unique_and_every_reference_is_met()
    {
        var html = await PaperHtml.FullPlan(DemoPlan.Ordinary);
        var ids = Id().Matches(html).Select(m => m.Groups[1].Value).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(LabelledBy().Matches(html).SelectMany(m => m.Groups[1].Value.Split(' ')), id => Assert.Contains(id, ids));
    }

    [Fact]
    public async Task Both_unit_systems_are_there_and_the_first_is_chosen()
    {
        var (us, metric) = (await PaperHtml.FullPlan(DemoPlan.Ordinary), await PaperHtml.FullPlan(DemoPlan.Ordinary, PaperSize.A4, UnitSystem.Metric));
        Assert.Matches("<b>3,354</b><span class=\"figure-unit\">&#xA0;sq ft", us);
        Assert.Matches("<b>312</b><span class=\"figure-unit\">&#xA0;m&#xB2;", metric);
        Assert.Contains("@page{size:letter}", us);
        Assert.Contains("@page{size:A4}", metric);
    }

    [Fact]
    public async Task The_handout_of_a_dry_lawn_says_what_would_help_and_has_no_timetable()
    {
        var html = await PaperHtml.Handout(DemoPlan.Dry);
        Assert.Contains("What would make the water enough", html);
        Assert.DoesNotContain("tape this to the tap", html);
        Assert.All(DemoPlan.Dry.Water.Remedies, r => Assert.Contains(r.Sentence[..20], html));
    }

    [Fact]
    public async Task The_handout_of_a_waiting_lawn_says_until_when()
    {
        var html = await PaperHtml.Handout(DemoPlan.Waiting);
        Assert.Contains("Not before", html);
        Assert.Contains(DemoPlan.Waiting.Verdict.WaitUntil!.Value.ToString("MMMM d, yyyy", System.Globalization.CultureInfo.InvariantCulture), html);
    }

    [Fact]
    public async Task The_handout_carries_dates_timetable_list_and_cautions()
    {
        var html = await PaperHtml.Handout(DemoPlan.Ordinary);
        Assert.All(new[] { "What happens when", "tape this to the tap", "What to look for", "What to buy", "Take care" }, part => Assert.Contains(part, html));
        Assert.All(DemoPlan.Ordinary.Tasks, t => Assert.Contains(t.Title, html));
        Assert.All(DemoPlan.Ordinary.Cautions, c => Assert.Contains(c.Title, html));
    }

    internal static RecoveryPlan Plan(string lawn) => lawn switch
    {
        "ordinary" => DemoPlan.Ordinary,
        "dry" => DemoPlan.Dry,
        _ => DemoPlan.Waiting,
    };

    /// <summary>Every figure reachable from a value, by reflection: a figure added to a record and forgotten on paper is found.</summary>
    private static IEnumerable<Figure> Figures(object? value) => value switch
    {
        null or string => [],
        Figure figure => [figure],
        IEnumerable items => items.Cast<object?>().SelectMany(Figures),
        _ when value.GetType().Namespace?.StartsWith("Seedfall.", StringComparison.Ordinal) == true && !value.GetType().IsEnum =>
            value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0).SelectMany(p => Figures(p.GetValue(value))),
        _ => [],
    };

    [GeneratedRegex(" on[a-z]+=\"")]
    private static partial Regex EventAttribute();

    [GeneratedRegex("<li>")]
    private static partial Regex ListItem();

    [GeneratedRegex(" id=\"([^\"]+)\"")]
    private static partial Regex Id();

    [GeneratedRegex("aria-labelledby=\"([^\"]+)\"")]
    private static partial Regex LabelledBy();
}
