namespace Seedfall.Web.Tests;

/// <summary>Addresses of the demo's lawns. Finding them on the desk would plan all three first.</summary>
internal static class DemoLawns
{
    internal const string Mill = "/lawns/mill-lane-corner-lawn-tansy-ford-invente";

    internal const string Quarry = "/lawns/quarry-hill-slope-tansy-ford-invented";

    internal const string Ferry = "/lawns/ferry-landing-lawn-tansy-ford-invented";

    /// <summary>Address of a demo lawn by its file's name.</summary>
    internal static string Of(string name) => new[] { Mill, Quarry, Ferry }.Single(address => address.StartsWith("/lawns/" + name, StringComparison.Ordinal));
}
