package quoin.curves.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import quoin.curves.set.AxlePose;
import quoin.curves.set.AxlePose.StandingWheel;
import quoin.mechanics.SpacePoint;
import quoin.suspension.CurveOutput;
import quoin.suspension.Member;

/**
 * Draws one view of an axle: joints on the body are filled squares, joints that move are rings, the coil-over is a heavy
 * line, the steering axis a chain line; with the adjuster turned everything is dotted.
 */
final class GeometryPainter {

    private static final int DISC = 48;
    private static final double ROOM_MM = 60;

    private final Ink ink;
    private final View view;
    private double left;
    private double bottom;
    private double scale;
    private double height;

    GeometryPainter(Ink ink, View view) {
        this.ink = ink;
        this.view = view;
    }

    /**
     * Paints the view into an area.
     *
     * @param frame the pose the view is scaled to, so that it does not jump while the wheel moves
     */
    void paint(Graphics2D g, Rectangle2D area, AxlePose frame, AxlePose pose) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(ink.font());
        g.setColor(ink.text());
        g.drawString(view.title(), (float) (area.getX() + ink.em() * 0.4), (float) (area.getY() + ink.em() * 1.1));
        fit(area, frame);
        List<StandingWheel> seen = pose.wheels().stream().filter(this::isSeen).toList();
        for (StandingWheel wheel : seen) {
            wheel(g, wheel);
        }
        ground(g, area, frame);
        for (StandingWheel wheel : seen) {
            wheel.members().forEach(member -> member(g, member, wheel.after()));
        }
        for (StandingWheel wheel : seen) {
            if (!wheel.after()) {
                wheel.members().forEach(member -> joints(g, member));
                name(g, wheel);
            }
        }
    }

    /** From the left, the right wheel stands behind the left one. */
    private boolean isSeen(StandingWheel wheel) {
        return view != View.SIDE || wheel.corner().isLeft() || wheel.after();
    }

    private void fit(Rectangle2D area, AxlePose frame) {
        List<SpacePoint> points = new ArrayList<>();
        for (StandingWheel wheel : frame.wheels()) {
            wheel.members().forEach(m -> {
                points.add(m.from());
                points.add(m.to());
            });
            points.addAll(disc(wheel));
        }
        double minRight = points.stream().mapToDouble(view::right).min().orElse(0) - ROOM_MM / 2;
        double maxRight = points.stream().mapToDouble(view::right).max().orElse(1) + ROOM_MM / 2;
        double minUp = points.stream().mapToDouble(view::up).min().orElse(0) - ROOM_MM;
        double maxUp = points.stream().mapToDouble(view::up).max().orElse(1) + ROOM_MM;
        double title = ink.em() * 1.4;
        double room = area.getHeight() - title;
        scale = Math.min(area.getWidth() / (maxRight - minRight), room / (maxUp - minUp));
        left = area.getCenterX() - scale * (minRight + maxRight) / 2;
        height = area.getY() + title + room / 2 + scale * (minUp + maxUp) / 2;
        bottom = area.getMaxY();
    }

    private double x(SpacePoint point) {
        return left + scale * view.right(point);
    }

    private double y(SpacePoint point) {
        return height - scale * view.up(point);
    }

    private void ground(Graphics2D g, Rectangle2D area, AxlePose frame) {
        if (view != View.PLAN && !frame.wheels().isEmpty()) {
            double level = frame.wheels().get(0).position().contactPoint().map(this::y).orElse(bottom);
            g.setColor(ink.faint());
            g.setStroke(ink.hair());
            g.draw(new Line2D.Double(area.getX(), level, area.getMaxX(), level));
        }
    }

    private void wheel(Graphics2D g, StandingWheel wheel) {
        Path2D outline = new Path2D.Double();
        List<SpacePoint> rim = disc(wheel);
        for (int i = 0; i < rim.size(); i++) {
            if (i == 0) {
                outline.moveTo(x(rim.get(i)), y(rim.get(i)));
            } else {
                outline.lineTo(x(rim.get(i)), y(rim.get(i)));
            }
        }
        outline.closePath();
        if (!wheel.after()) {
            Color text = ink.text();
            g.setColor(new Color(text.getRed(), text.getGreen(), text.getBlue(), 28));
            g.fill(outline);
        }
        g.setColor(ink.text());
        g.setStroke(wheel.after() ? ink.dots() : ink.hair());
        g.draw(outline);
    }

    /** The thin disc of the loaded radius, by the camber and toe it stands at. */
    private static List<SpacePoint> disc(StandingWheel wheel) {
        SpacePoint centre = wheel.position().wheelCentre().orElseThrow();
        SpacePoint contact = wheel.position().contactPoint().orElseThrow();
        double radius = Math.hypot(contact.xMm() - centre.xMm(), Math.hypot(contact.yMm() - centre.yMm(), contact.zMm() - centre.zMm()));
        double camber = Math.toRadians(wheel.position().value(CurveOutput.CAMBER).orElse(0));
        double toe = Math.toRadians(wheel.position().value(CurveOutput.TOE).orElse(0));
        double side = wheel.corner().isLeft() ? 1 : -1;
        double[] ahead = {Math.cos(toe), -side * Math.sin(toe), 0};
        double[] upward = {Math.sin(camber) * Math.sin(toe), side * Math.sin(camber) * Math.cos(toe), Math.cos(camber)};
        List<SpacePoint> rim = new ArrayList<>();
        for (int i = 0; i < DISC; i++) {
            double c = radius * Math.cos(2 * Math.PI * i / DISC);
            double s = radius * Math.sin(2 * Math.PI * i / DISC);
            rim.add(new SpacePoint(centre.xMm() + c * ahead[0] + s * upward[0], centre.yMm() + c * ahead[1] + s * upward[1],
                    centre.zMm() + c * ahead[2] + s * upward[2]));
        }
        return rim;
    }

    private void member(Graphics2D g, Member member, boolean after) {
        Stroke stroke = switch (member.kind()) {
            case CARRIER, HINGE -> ink.hair();
            case STEERING_AXIS -> ink.chain();
            case COIL, STRUT -> ink.heavy();
            case LINK, CRANK, ROD, ROCKER -> ink.line(true, false);
        };
        g.setColor(ink.text());
        g.setStroke(after ? ink.dots() : stroke);
        g.draw(new Line2D.Double(x(member.from()), y(member.from()), x(member.to()), y(member.to())));
    }

    private void joints(Graphics2D g, Member member) {
        double size = ink.em() * 0.42;
        boolean onBody = switch (member.kind()) {
            case LINK, HINGE, STRUT, COIL -> true;
            default -> false;
        };
        boolean moves = switch (member.kind()) {
            case LINK, ROD, ROCKER, COIL, STRUT -> true;
            default -> false;
        };
        if (moves) {
            Ellipse2D ring = new Ellipse2D.Double(x(member.to()) - size / 2, y(member.to()) - size / 2, size, size);
            g.setColor(ink.ground());
            g.fill(ring);
            g.setColor(ink.text());
            g.setStroke(ink.hair());
            g.draw(ring);
        }
        if (onBody) {
            g.setColor(ink.text());
            g.fill(new Rectangle2D.Double(x(member.from()) - size / 2, y(member.from()) - size / 2, size, size));
        }
    }

    private void name(Graphics2D g, StandingWheel wheel) {
        if (view == View.SIDE) {
            return;
        }
        SpacePoint centre = wheel.position().wheelCentre().orElseThrow();
        double radius = centre.zMm() - wheel.position().contactPoint().orElseThrow().zMm();
        SpacePoint above = view == View.FRONT ? new SpacePoint(centre.xMm(), centre.yMm(), centre.zMm() + radius)
                : new SpacePoint(centre.xMm() + radius, centre.yMm(), centre.zMm());
        String name = wheel.corner().words();
        g.setColor(ink.text());
        g.setFont(ink.bold());
        int width = g.getFontMetrics().stringWidth(name);
        g.drawString(name, (float) (x(above) - width / 2.0), (float) (y(above) - ink.em() * 0.35));
        g.setFont(ink.font());
    }
}
