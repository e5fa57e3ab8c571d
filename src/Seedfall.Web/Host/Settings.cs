using System.Net;
using Seedfall.Web.Data;

namespace Seedfall.Web.Host;

/// <summary>What can be set from the command line (<c>--port 5117</c>) or the environment (<c>SEEDFALL_WEB_PORT</c>).</summary>
/// <param name="Data">Folder of database, keys and backups.</param>
/// <param name="Port">Port to listen on; 0 takes a free one.</param>
/// <param name="Bind">Address to listen on. The app has no sign-in yet: keep it on this machine.</param>
/// <param name="Demo">Whether the invented demo is loaded into an empty database.</param>
/// <param name="Hosts">Host names answered.</param>
/// <param name="SoilSurveyMail">Mail address told to the soil survey; null keeps its lookup off (<c>--soilmail you@example.org</c>).</param>
internal sealed record Settings(DataFolder Data, int Port, IPAddress Bind, bool Demo, IReadOnlyList<string> Hosts, string? SoilSurveyMail)
{
    /// <summary>Largest weather upload, all its files together.</summary>
    public const long UploadBytes = 64L << 20;

    /// <summary>Largest upload of a photograph.</summary>
    public const long PhotoBytes = 41L << 20;

    /// <summary>Largest other request.</summary>
    public const long FormBytes = 1L << 20;

    public static Settings From(IConfiguration configuration) => new(
        new DataFolder(Path.GetFullPath(configuration["data"] ?? ".data")),
        Port: Whole(configuration["port"], 5117),
        Bind: Address(configuration["bind"]),
        Demo: configuration["demo"] is not ("false" or "no" or "0"),
        Hosts: ["localhost", "127.0.0.1", "[::1]", .. (configuration["hosts"] ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)],
        SoilSurveyMail: Mail(configuration["soilmail"]));

    private static int Whole(string? text, int otherwise) => text is null
        ? otherwise
        : int.TryParse(text, out var port) && port is >= 0 and <= 65535
            ? port
            : throw new StartRefusedException($"--port must be a whole number from 0 to 65535, not '{text}'");

    private static string? Mail(string? text) => string.IsNullOrWhiteSpace(text)
        ? null
        : text.Length <= 200 && text.IndexOf('@') is > 0 and var at && at < text.Length - 1 && text.All(c => c is > ' ' and <= '~' and not ('(' or ')' or '<' or '>'))
            ? text
            : throw new StartRefusedException($"--soilmail must be a mail address such as you@example.org, not '{text}'");

    private static IPAddress Address(string? text) => text is null
        ? IPAddress.Loopback
        : IPAddress.TryParse(text, out var address)
            ? address
            : throw new StartRefusedException($"--bind must be an IP address such as 127.0.0.1, not '{text}'");
}
