using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Seedfall.Engine.Workings;
using Seedfall.Exchange.Paper.Records;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;
using Seedfall.Planning.Water;

namespace Seedfall.Exchange.Paper;

/// <summary>A plan as self-contained HTML: style inside, no script, nothing fetched. The PDF is printed from exactly this.</summary>
public static class PaperHtml
{
    /// <summary>The full plan with the workings of every figure.</summary>
    public static Task<string> FullPlan(RecoveryPlan plan, PaperSize size = PaperSize.Letter, UnitSystem first = UnitSystem.UsCustomary)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Page($"Recovery plan {plan.Season}: {plan.LawnName}", size, typeof(FullPlan), new()
        {
            [nameof(Paper.FullPlan.Plan)] = plan,
            [nameof(Paper.FullPlan.First)] = first,
            [nameof(Paper.FullPlan.Appendix)] = true,
        });
    }

    /// <summary>The owner's own printed plan.</summary>
    public static Task<string> Handout(RecoveryPlan plan, PaperSize size = PaperSize.Letter, UnitSystem first = UnitSystem.UsCustomary)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Page($"Your lawn {plan.Season}: {plan.LawnName}", size, typeof(Handout), new()
        {
            [nameof(Paper.Handout.Plan)] = plan,
            [nameof(Paper.Handout.First)] = first,
        });
    }

    /// <summary>Today's and the week's watering, to tape to the tap.</summary>
    public static Task<string> Tap(string lawnName, LawnWatering watering, PaperSize size = PaperSize.Letter, UnitSystem first = UnitSystem.UsCustomary)
    {
        ArgumentNullException.ThrowIfNull(watering);
        return Page($"Watering: {lawnName}", size, typeof(TapWeek), new()
        {
            [nameof(TapWeek.LawnName)] = lawnName,
            [nameof(TapWeek.Watering)] = watering,
            [nameof(TapWeek.First)] = first,
        });
    }

    /// <summary>The record book for an inspector, on its side.</summary>
    public static Task<string> Records(RecordBook book, PaperSize size = PaperSize.Letter, UnitSystem first = UnitSystem.UsCustomary)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Page($"Record of applications: {book.Lawn.Name}", size, typeof(RecordSheet), new()
        {
            [nameof(RecordSheet.Book)] = book,
            [nameof(RecordSheet.First)] = first,
        }, landscape: true);
    }

    /// <summary>What stays with the customer after an application.</summary>
    public static Task<string> Notice(CustomerNotice notice, PaperSize size = PaperSize.Letter)
    {
        ArgumentNullException.ThrowIfNull(notice);
        return Page(notice.Heading, size, typeof(NoticeSheet), new() { [nameof(NoticeSheet.Notice)] = notice });
    }

    /// <summary>The marker for the treated lawn at its true size.</summary>
    public static Task<string> Flag(string lawnName, LawnFlag flag, PaperSize size = PaperSize.Letter)
    {
        ArgumentNullException.ThrowIfNull(flag);
        return Page($"Marker: {lawnName}", size, typeof(FlagSheet), new()
        {
            [nameof(FlagSheet.LawnName)] = lawnName,
            [nameof(FlagSheet.Flag)] = flag,
        });
    }

    /// <summary>Gets the renderer ready while something else is worked on; changes nothing.</summary>
    public static Task WarmUp() => Task.Run(() => Page("", PaperSize.Letter, typeof(PaperSample), []));

    private static async Task<string> Page(string title, PaperSize size, Type body, Dictionary<string, object?> parameters, bool landscape = false)
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        RenderFragment content = builder =>
        {
            builder.OpenComponent(0, body);
            builder.AddMultipleAttributes(1, parameters!);
            builder.CloseComponent();
        };
        var page = ParameterView.FromDictionary(new Dictionary<string, object?>
        {
            [nameof(PaperPage.Title)] = title,
            [nameof(PaperPage.Size)] = size,
            [nameof(PaperPage.Landscape)] = landscape,
            [nameof(PaperPage.ChildContent)] = content,
        });
        return await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<PaperPage>(page)).ToHtmlString());
    }
}
