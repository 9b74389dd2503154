# グラウンドと守備位置。
base-first = 一塁
base-second = 二塁
base-third = 三塁
base-home = 本塁
position-pitcher = 投手
position-catcher = 捕手
position-first-base = 一塁手
position-second-base = 二塁手
position-third-base = 三塁手
position-shortstop = 遊撃手
position-left-field = 左翼手
position-center-field = 中堅手
position-right-field = 右翼手
position-short-field = ショートフィルダー
side-visitors = ビジター
side-home = ホーム

# ボックススコアでの略号。
short-pitcher = 投
short-catcher = 捕
short-first-base = 一
short-second-base = 二
short-third-base = 三
short-shortstop = 遊
short-left-field = 左
short-center-field = 中
short-right-field = 右
short-short-field = 10
short-designated-hitter = 指
short-extra-hitter = EP
short-pinch-hitter = 打
short-pinch-runner = 走
