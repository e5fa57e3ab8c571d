using System.Xml;

namespace Seedfall.Exchange.Ground;

/// <summary>XML read one node at a time: no document type, no entities of its own, no outside files, bounded depth and size.</summary>
internal static class XmlWalk
{
    /// <summary>A reader that follows nothing and expands nothing.</summary>
    internal static XmlReader Open(Stream bytes) => XmlReader.Create(bytes, new XmlReaderSettings
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        MaxCharactersInDocument = OutlineLimits.MostBytes,
        MaxCharactersFromEntities = 1024,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
        CloseInput = false,
    });

    /// <summary>Walks every node and turns the reader's own faults into refusals.</summary>
    internal static void Each(XmlReader reader, Action visit)
    {
        try
        {
            while (reader.Read())
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
            throw new RefusedException(
                new(Math.Max(1, broken.LineNumber), Math.Max(1, broken.LinePosition)),
                broken.Message.Contains("DTD", StringComparison.Ordinal) ? "XML without a document type"
                : broken.Message.Contains("MaxCharacters", StringComparison.Ordinal) ? "at most 16 million characters and no entities of its own"
                : "well-formed XML",
                broken.Message.Contains("DTD", StringComparison.Ordinal) ? "a document type" : "something else");
        }
    }

    internal static Spot At(XmlReader reader) => reader is IXmlLineInfo line && line.HasLineInfo() ? new(line.LineNumber, line.LinePosition) : default;
}
