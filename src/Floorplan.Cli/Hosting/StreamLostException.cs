namespace Floorplan.Cli.Hosting;

/// <summary>Standard input or output is not there or takes no more; the message is a sentence for people.</summary>
internal sealed class StreamLostException(string sentence) : IOException(sentence);
