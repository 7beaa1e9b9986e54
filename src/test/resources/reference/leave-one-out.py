# Leave-one-out error of height curves by refitting without each tree in turn. Python, scipy 1.17 least_squares. Writes idaho-leave-one-out.csv.
import numpy as np, csv
from scipy.optimize import least_squares
F={'naslund':(lambda d,p:d**2/(p[0]+p[1]*d)**2,[2,.15]),'naslund3':(lambda d,p:d**3/(p[0]+p[1]*d)**3,[2,.28]),'michailoff':(lambda d,p:p[0]*np.exp(-p[1]/d),[40,18]),'curtis':(lambda d,p:p[0]*(d/(1+d))**p[1],[40,18]),'wykoff':(lambda d,p:np.exp(p[0]+p[1]/(d+1)),[3.7,-19]),'power':(lambda d,p:p[0]*d**p[1],[3,.5]),'meyer':(lambda d,p:p[0]*(1-np.exp(-p[1]*d)),[38,.028]),'hyperbolic':(lambda d,p:p[0]*d/(p[1]+d),[52,42]),
'ratkowsky':(lambda d,p:p[0]*np.exp(-p[1]/(d+p[2])),[80,100,50]),'logistic':(lambda d,p:p[0]/(1+p[1]*np.exp(-p[2]*d)),[40,3,.04]),'gompertz':(lambda d,p:p[0]*np.exp(-p[1]*np.exp(-p[2]*d)),[45,1.6,.025]),'prodan':(lambda d,p:d**2/(p[0]+p[1]*d+p[2]*d*d),[0,.9,.017]),'weibull':(lambda d,p:p[0]*(1-np.exp(-p[1]*d**p[2])),[47,.034,.85]),'korf':(lambda d,p:p[0]*np.exp(-p[1]*d**-p[2]),[103,5.85,.39]),'chapman_richards':(lambda d,p:p[0]*(1-np.exp(-p[1]*d))**p[2],[45,.0176,.815]),'hossfeld':(lambda d,p:p[0]/(1+1/(p[1]*d**p[2])),[60,.02,.97])}
R=list(csv.DictReader(open('idaho-heights.csv')))
o=open('idaho-leave-one-out.csv','w'); o.write('species,form,rmse\n')
for sp in ('DF','GF'):
    d=np.array([float(r['dbh_cm']) for r in R if r['species']==sp]); h=np.array([float(r['height_m']) for r in R if r['species']==sp])-1.3
    E={}
    for nm,(f,p0) in F.items():
        if sp=='DF' and nm in('weibull','korf','chapman_richards','hossfeld'): continue
        fit=lambda d,h,p0:least_squares(lambda p:f(d,p)-h,p0,xtol=1e-14,ftol=1e-14,gtol=1e-14,x_scale='jac',max_nfev=3000).x
        p=fit(d,h,p0); e=[]
        for i in range(len(d)):
            m=np.arange(len(d))!=i
            e.append(h[i]-f(d[i],fit(d[m],h[m],p)))
        E[nm]=np.array(e)
    for nm in E: o.write('%s,%s,%.6f\n'%(sp,nm,np.sqrt((E[nm]**2).mean())))
