using System.Reflection;

namespace Seedfall.Exchange.Catalog;

/// <summary>Files carried inside the program.</summary>
internal static class Embedded
{
    /// <summary>The text of one file; throws where the build left it out.</summary>
    public static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded in Seedfall.Exchange");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
