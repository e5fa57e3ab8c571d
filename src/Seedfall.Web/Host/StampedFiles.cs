using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Seedfall.Exchange.Paper;

namespace Seedfall.Web.Host;

/// <summary>Addresses of style sheets and scripts with a stamp of their content, so that a browser may keep them for ever.</summary>
internal sealed class StampedFiles(IWebHostEnvironment environment)
{
    /// <summary>Address of the paper's style sheet, which the printed plan and the plan on the screen share.</summary>
    public const string PaperPath = "/paper.css";

    private readonly ConcurrentDictionary<string, string> _stamped = new();

    /// <summary>The address of a file under wwwroot; the plain one where the file is missing.</summary>
    public string this[string path] => _stamped.GetOrAdd(path, Stamp);

    /// <summary>For ever where the address carries the stamp, else asked for again each time.</summary>
    public static string CacheFor(HttpRequest request) => request.Query.ContainsKey("v") ? "public, max-age=31536000, immutable" : "no-cache";

    private string Stamp(string path)
    {
        if (path == PaperPath)
        {
            return Stamped(path, SHA256.HashData(Encoding.UTF8.GetBytes(PaperCss.Text)));
        }

        var file = environment.WebRootFileProvider.GetFileInfo(path);
        if (!file.Exists)
        {
            return path;
        }

        using var content = file.CreateReadStream();
        return Stamped(path, SHA256.HashData(content));
    }

    private static string Stamped(string path, byte[] hash) => $"{path}?v={Convert.ToHexStringLower(hash)[..12]}";
}
