using Xunit;

namespace Floorplan.Tests.Robustness;

/// <summary>Tests that measure the whole process: they run after the others, one at a time.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public class Alone;
