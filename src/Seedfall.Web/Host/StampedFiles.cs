using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace Seedfall.Web.Host;

/// <summary>Addresses of style sheets and scripts with a stamp of their content, so that a browser may keep them for ever.</summary>
internal sealed class StampedFiles(IWebHostEnvironment environment)
{
    private readonly ConcurrentDictionary<string, string> _stamped = new();

    /// <summary>The address of a file under wwwroot; the plain one where the file is missing.</summary>
    public string this[string path] => _stamped.GetOrAdd(path, Stamp);

    private string Stamp(string path)
    {
        var file = environment.WebRootFileProvider.GetFileInfo(path);
        if (!file.Exists)
        {
            return path;
        }

        using var content = file.CreateReadStream();
        return $"{path}?v={Convert.ToHexStringLower(SHA256.HashData(content))[..12]}";
    }
}
