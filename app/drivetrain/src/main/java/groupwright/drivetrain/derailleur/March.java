package groupwright.drivetrain.derailleur;

/**
 * The way of the cage from the forward to the rearward stop, looking for the first angle at which the path is as long as
 * the chain.
 *
 * <p>Plain bracketing between the stops fails: where a wrap passes 0 the path jumps by a whole wheel, and between angles
 * at which wheels overlap there is no path. So the march looks every {@link #STEP} and splits a step whose ends do not
 * tell what is inside: where a margin ends, it is bisected; where length or a margin turns round within the step and
 * could reach 0 there (told by the slopes at both ends), the step is halved, down to {@link #FINEST}. What remains is two
 * turns of one quantity within a step; length and wraps bend over tens of degrees, and a test compares with a march of
 * 0.01°.
 */
final class March {
    private static final double STEP = StrictMath.toRadians(4);
    private static final double FINEST = StrictMath.toRadians(0.002);
    private static final double CLOSE = StrictMath.toRadians(1e-10);
    private static final double SAME_LENGTH = 1e-7; // pitches; more is a jump and no root

    private final Loop loop;
    private final Findings findings = new Findings();

    March(Loop loop) {
        this.loop = loop;
    }

    /** Marches until the chain closes or the rearward stop is reached; angles in radians. */
    Findings between(double forward, double rearward) {
        int steps = (int) StrictMath.ceil((forward - rearward) / STEP);
        double step = (forward - rearward) / steps;
        Sample ahead = new Sample();
        Sample behind = new Sample();
        loop.at(forward, ahead);
        findings.start(ahead);
        for (int i = 1; i <= steps && !findings.closes(); i++) {
            loop.at(i == steps ? rearward : forward - i * step, behind);
            walk(ahead, behind);
            Sample spare = ahead;
            ahead = behind;
            behind = spare;
        }
        return findings;
    }

    /** From one sample to the next one rearwards. */
    private void walk(Sample ahead, Sample behind) {
        if (findings.closes()) {
            return;
        }
        if (ahead.isFree() && behind.isFree()) {
            walkFree(ahead, behind);
        } else if (behind.isFree() && isFarTooLong(behind, ahead.angle - behind.angle)) {
            findings.passed(behind); // no root near, and a chain too long needs no edge at the front
        } else if (ahead.isFree() || behind.isFree()) {
            walkOverEdge(ahead, behind);
        } else {
            findings.blocked(behind);
            boolean tells = ahead.blockedBy == behind.blockedBy && !turns(ahead, behind, ahead.blockedBy);
            if (!tells && isLong(ahead, behind)) {
                split(ahead, behind);
            }
        }
    }

    private void walkFree(Sample ahead, Sample behind) {
        boolean tells = true;
        for (int i = 0; i <= Sample.LENGTH && tells; i++) {
            tells = !turns(ahead, behind, i);
        }
        boolean isLong = isLong(ahead, behind);
        if (!tells && isLong) {
            split(ahead, behind);
        } else if (ahead.value[Sample.LENGTH] * behind.value[Sample.LENGTH] <= 0 && !solve(ahead, behind)) {
            if (isLong) {
                split(ahead, behind);
            }
        } else if (!findings.closes()) {
            findings.passed(behind);
        }
    }

    /** Halves the step until the edge of a margin is known, then walks up to it and on from it. */
    private void walkOverEdge(Sample ahead, Sample behind) {
        Sample front = ahead;
        Sample back = behind;
        while (front.angle - back.angle > CLOSE) {
            Sample middle = middle(front, back);
            if (middle.isFree() == ahead.isFree()) {
                front = middle;
            } else {
                back = middle;
            }
        }
        if (front != ahead) {
            walk(ahead, front);
        }
        if (ahead.isFree()) {
            findings.left(back.blockedBy);
        } else {
            findings.entered(back, front.blockedBy);
        }
        if (back != behind) {
            walk(back, behind);
        }
    }

    private void split(Sample ahead, Sample behind) {
        Sample middle = middle(ahead, behind);
        walk(ahead, middle);
        walk(middle, behind);
    }

    /** Newton's steps, kept within the bracket by halving. False if there is an obstacle or a jump inside. */
    private boolean solve(Sample ahead, Sample behind) {
        Sample at = new Sample();
        double front = ahead.angle;
        double back = behind.angle;
        boolean fallsRearwards = ahead.value[Sample.LENGTH] > behind.value[Sample.LENGTH];
        double angle = (front + back) / 2;
        double moved = front - back;
        while (StrictMath.abs(moved) > CLOSE) {
            loop.at(angle, at);
            if (!at.isFree()) {
                return false;
            }
            double beyond = at.value[Sample.LENGTH];
            if (beyond > 0 == fallsRearwards) {
                front = angle;
            } else {
                back = angle;
            }
            double next = angle - beyond / at.slope[Sample.LENGTH];
            next = next >= back && next <= front ? next : (front + back) / 2;
            moved = next - angle;
            angle = next;
        }
        loop.at(angle, at);
        boolean isRoot = at.isFree() && StrictMath.abs(at.value[Sample.LENGTH]) < SAME_LENGTH;
        if (isRoot) {
            findings.closesAt(angle);
        }
        return isRoot;
    }

    /** Whether a quantity of one sign at both ends turns round between them and could reach 0 on the way. */
    private static boolean turns(Sample ahead, Sample behind, int index) {
        double before = ahead.value[index];
        double after = behind.value[index];
        double way = ahead.angle - behind.angle;
        double nextBefore = before - ahead.slope[index] * way; // the angle falls on the way
        double nextAfter = after + behind.slope[index] * way;
        boolean bothShrink = (nextBefore - before) * before < 0 && (nextAfter - after) * after < 0;
        return before * after > 0 && bothShrink && (nextBefore * before < 0 || nextAfter * after < 0);
    }

    /** Whether the chain is longer than the path by more than that changes over a step. */
    private static boolean isFarTooLong(Sample sample, double step) {
        return -sample.value[Sample.LENGTH] > 2 * step * StrictMath.abs(sample.slope[Sample.LENGTH]);
    }

    private static boolean isLong(Sample ahead, Sample behind) {
        return ahead.angle - behind.angle > FINEST;
    }

    private Sample middle(Sample ahead, Sample behind) {
        Sample middle = new Sample();
        loop.at((ahead.angle + behind.angle) / 2, middle);
        return middle;
    }
}
