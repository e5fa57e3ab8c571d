using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Photos.Cover;
using Seedfall.Photos.Overview;
using Seedfall.Planning.Field;
using Seedfall.Web.Data;

namespace Seedfall.Web.Features.Photos;

/// <summary>Photographs in words.</summary>
internal static class PhotoWords
{
    public static string Cover(PhotoRow photo) => photo is { Cover: { } cover, CoverLow: { } low, CoverHigh: { } high }
        ? $"{Percent(cover)} % green ({Percent(low)} to {Percent(high)})"
        : "not marked yet";

    public static string Percent(double share) => (100.0 * share).ToString("0", CultureInfo.InvariantCulture);

    public static string Day(DateOnly day, UnitSystem system) => FigureText.DateText(day, system == UnitSystem.UsCustomary);

    public static string Of(CoverFlag flag) => flag switch
    {
        CoverFlag.TooDark => "Much of it is near black. Take it again in more light.",
        CoverFlag.BlownHighlights => "Much of it is blown out. Take it again with the sun behind a cloud, or shade the whole frame.",
        CoverFlag.StrongShadow => "Deep shadow lies beside full sun. Shade the whole frame and take it again.",
        CoverFlag.Blurred => "Nothing in it is sharp. Hold still and take it again.",
        CoverFlag.PaperMulch => "Something evenly blue-green, like dyed paper mulch, was left out. Answer the points below to settle it.",
        CoverFlag.ColorCast => "The light colors everything. Lay a gray card in the frame next time.",
        CoverFlag.CardUnreadable => "The gray card is too dark or blown out to tell the light.",
        CoverFlag.TooSmall => "Too few pixels to tell a blade from its surroundings.",
        CoverFlag.Unclear => "Green and ground run into each other. Answer the points below to settle it.",
        _ => throw new ArgumentOutOfRangeException(nameof(flag), flag, "is not a flag"),
    };

    public static string Of(MarkProblem problem) => problem switch
    {
        MarkProblem.NotFour => "Four points within the picture are needed.",
        MarkProblem.TooClose => "Two of the marks lie on one another. Mark each corner once.",
        MarkProblem.InLine => "Three of the marks lie in one line. Mark the four corners of ground you know the size of.",
        MarkProblem.Crossed => "The sides between the marks cross. Mark them in turn: near left, near right, far right, far left.",
        MarkProblem.Dented => "One mark lies inside the triangle of the other three. Flat ground cannot look so: mark the corners again.",
        MarkProblem.WrongWayRound => "Left and right are exchanged. Start at the near left corner and go on to the near right.",
        MarkProblem.BeyondHorizon => "The horizon would run through the marked ground. Mark the corners again.",
        _ => throw new ArgumentOutOfRangeException(nameof(problem), problem, "is not a problem of marks"),
    };

    public static string Of(CoverStanding standing) => standing switch
    {
        CoverStanding.Ahead => "Ahead",
        CoverStanding.AsForecast => "As forecast",
        CoverStanding.Behind => "Behind",
        _ => "No comparison yet",
    };
}
