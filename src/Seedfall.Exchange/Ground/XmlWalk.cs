using System.Xml;

namespace Seedfall.Exchange.Ground;

/// <summary>XML read one node at a time: no document type, no entities of its own, no outside files, bounded depth and size.</summary>
internal static class XmlWalk
{
    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        MaxCharactersInDocument = OutlineLimits.MostBytes,
        MaxCharactersFromEntities = 1024,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
        CloseInput = false,
    };

    /// <summary>A reader that follows nothing and expands nothing; a beginning that cannot be decoded is refused here.</summary>
    internal static XmlReader Open(Stream bytes)
    {
        try
        {
            return XmlReader.Create(bytes, Settings);
        }
        catch (XmlException broken)
        {
            throw Refused(broken);
        }
    }

    /// <summary>Walks every node and turns the reader's own faults into refusals.</summary>
    internal static void Each(XmlReader reader, Action visit)
    {
        try
        {
            while (Next(reader))
            {
                if (reader.Depth > OutlineLimits.MostXmlDepth)
                {
                    throw new RefusedException(At(reader), $"at most {OutlineLimits.MostXmlDepth} levels of nesting", "more");
                }

                visit();
            }
        }
        catch (XmlException broken)
        {
            throw Refused(broken);
        }
    }

    /// <summary>Element the file begins with; empty where there is none or the file breaks before it: then the walk meets it again and tells its place.</summary>
    internal static string Root(XmlReader reader)
    {
        try
        {
            while (Next(reader) && reader.NodeType != XmlNodeType.Element)
            {
            }

            return reader.NodeType == XmlNodeType.Element ? reader.LocalName : "";
        }
        catch (XmlException)
        {
            return "";
        }
    }

    /// <summary>The platform's reader throws on its own arguments where the encoding a declaration names does not fit the bytes it stands in.</summary>
    private static bool Next(XmlReader reader)
    {
        try
        {
            return reader.Read();
        }
        catch (ArgumentException)
        {
            throw new RefusedException(new(1, 1), "XML in the encoding it names", "something else");
        }
    }

    internal static Spot At(XmlReader reader) => reader is IXmlLineInfo line && line.HasLineInfo() ? new(line.LineNumber, line.LinePosition) : default;

    private static RefusedException Refused(XmlException broken) => new(
        new(Math.Max(1, broken.LineNumber), Math.Max(1, broken.LinePosition)),
        broken.Message.Contains("DTD", StringComparison.Ordinal) ? "XML without a document type"
        : broken.Message.Contains("MaxCharacters", StringComparison.Ordinal) ? "at most 16 million characters and no entities of its own"
        : "well-formed XML",
        broken.Message.Contains("DTD", StringComparison.Ordinal) ? "a document type" : "something else");
}
