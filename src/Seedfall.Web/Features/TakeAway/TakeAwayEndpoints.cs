namespace Seedfall.Web.Features.TakeAway;

/// <summary>The plan as paper, calendar, list and data.</summary>
internal static class TakeAwayEndpoints
{
    public static void MapTakeAway(this WebApplication app)
    {
    }
}
