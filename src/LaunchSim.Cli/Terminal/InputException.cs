namespace LaunchSim.Cli.Terminal;

/// <summary>What was asked for cannot be done as asked; the message is a sentence for the user.</summary>
internal sealed class InputException(string message) : Exception(message);

/// <summary>A result could not be written; the message is a sentence for the user.</summary>
internal sealed class OutputException(string message) : Exception(message);

/// <summary>The user ended a study of which something is kept; the message is a sentence for the user.</summary>
internal sealed class InterruptedStudyException(string message) : OperationCanceledException(message);
