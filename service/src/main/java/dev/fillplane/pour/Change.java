package dev.fillplane.pour;

import dev.fillplane.finding.Remark;

/** Something the crew can change, and what the verdict would then be. */
public record Change(Remark remark, Verdict verdict) {}
